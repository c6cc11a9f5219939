export { edgeCount, edgeSites } from './edges.ts';
export { type BlockLabel, blockLabel, formOf, onlySizes, sharedList, sizeKeyOf } from './labels.ts';
export { type Measurement, measurementsOf } from './measurements.ts';
export { findMultiple, type Multiple } from './multiple.ts';
export type { BlockInSize, BlockStudy, PieceStudy, Side } from './piece-study.ts';
export { planForm, roundPlans } from './plan-form.ts';
export { type Readings, rowBlocks } from './reading.ts';
export { type ReportFinding, type ReportRow, type RowsReport, reportRows } from './rows.ts';
export { type Study, study } from './study.ts';
