import { expect, type Page } from '@playwright/test';

/** Opens the page in a fresh browser and waits for the full form, before it is filled. Collects what the browser complains about. */
export async function openApp(page: Page): Promise<string[]> {
  const complaints = watchComplaints(page);
  await page.goto('/');
  await waitForFullForm(page);
  return complaints;
}

/** Opens the page and waits for a body to be open; its form may still be on the way. */
export async function openPage(page: Page): Promise<string[]> {
  const complaints = watchComplaints(page);
  await page.goto('/');
  await expect(page.getByRole('textbox', { name: 'Waist girth', exact: true })).not.toHaveValue('');
  return complaints;
}

export function watchComplaints(page: Page): string[] {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('request', (request) => {
    const { protocol, hostname } = new URL(request.url());
    if (protocol !== 'blob:' && protocol !== 'data:' && hostname !== '127.0.0.1') {
      complaints.push(`asked ${request.url()}`);
    }
  });
  return complaints;
}

export async function waitForFullForm(page: Page): Promise<void> {
  await expect(page.locator('p.status-work')).toHaveAttribute('data-standing', WHOLE, { timeout: 60_000 });
}

/** The shape is up to date; its panels need not be cut for the filling yet, which takes some seconds more. */
export const WHOLE = /^(unfilled|upToDate)$/;

export async function waitForFilledForm(page: Page): Promise<void> {
  await expect(page.locator('p.status-work')).toHaveText('Up to date', { timeout: 120_000 });
}

export const STAGE_NAMES = [
  'Tape',
  'Body',
  'Seams',
  'Panels',
  'Inside',
  'Cutting',
  'Laying',
  'Making',
  'Checking',
] as const;
export type StageName = (typeof STAGE_NAMES)[number];

export async function goTo(page: Page, stage: StageName): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Stages' })
    .getByRole('button', { name: new RegExp(`^${stage}`) })
    .click();
  await expect(page.getByRole('heading', { level: 2, name: stage })).toBeVisible();
}
