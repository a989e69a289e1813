import table from '../../../shared/layers.json' with { type: 'json' };

/** Colours by which workshops usually tell cutting (red) from drawing; no standard, so made to be replaced. */
export const CUTTER_COLOURS: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(table.cutter).map(([layer, { colour }]) => [layer, colour]),
);
