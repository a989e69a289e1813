export { GAUGE_OPTIONS, type GaugeOptions } from './gauge-options.ts';
export { type GaugedForm, gaugedForm } from './gauged-form.ts';
export { howToHoldGauges } from './how-to-hold.ts';
export { makeGauges, PROFILE } from './make-gauges.ts';
export type { GaugePhrases } from './phrases.ts';
