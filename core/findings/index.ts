export { CATALOGUE, kindOf } from './catalogue.ts';
export type { FindingKind, SizedFact, Voice } from './kind.ts';
export { type Telling, tell, tellAs } from './tell.ts';
export { placeName } from './voice.ts';
