import { createHash } from 'node:crypto';
import type { Plugin } from 'vite';

const NOTHING_ELSE = "object-src 'none'; base-uri 'none'; form-action 'none'";

/** Built pages load nothing from anywhere else. While developing, Vite's own inline scripts must pass too. */
const POLICY = `default-src 'self'; img-src 'self' blob: data:; font-src 'self'; worker-src 'self' blob:; ${NOTHING_ELSE}`;
const DEV_POLICY = `${POLICY}; script-src 'self' 'unsafe-inline'; style-src 'self' 'unsafe-inline'; connect-src 'self' ws:`;

/** Puts the policy of the site first into its page. */
export function contentSecurityPolicy(): Plugin {
  let isServing = false;
  return {
    name: 'content-security-policy',
    configResolved: (config) => {
      isServing = config.command === 'serve' && !config.isProduction;
    },
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: isServing ? DEV_POLICY : POLICY },
        injectTo: 'head-prepend',
      },
    ],
  };
}

/**
 * The policy of a page that holds everything itself: this script and this style, workers and pictures it makes of its own
 * bytes, and nothing from anywhere, not even from the folder it lies in.
 */
export function policyOfOneFile(script: string, style: string): string {
  return `default-src 'none'; script-src ${hashOf(script)}; style-src ${hashOf(style)}; img-src blob: data:; worker-src blob:; ${NOTHING_ELSE}`;
}

/** As browsers compare it: of the text between the tags, byte by byte. */
function hashOf(text: string): string {
  return `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
}
