/** The part of the Khronos validator's plain JavaScript interface that the tests use. */
declare module 'gltf-validator' {
  interface Report {
    readonly issues: {
      readonly numErrors: number;
      readonly numWarnings: number;
      readonly messages: readonly unknown[];
    };
    readonly info: Readonly<Record<string, unknown>>;
  }
  const validator: { validateBytes(bytes: Uint8Array): Promise<Report> };
  export default validator;
}
