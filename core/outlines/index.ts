export { type BlankOptions, blankPattern } from './blank.ts';
export { hatPattern } from './hat.ts';
export type { OutlineGauge, OutlineOptions } from './outline.ts';
export { panelPattern } from './panel.ts';
export { raglanPattern } from './raglan.ts';
