/** Grading: sizes, lines, fitting, shaping and spreading. This file only gathers what other folders use. */
export { compileExpression, evaluate, type FigureResult } from './figure.ts';
export { type Density, densityOf, type Fitted, fitRows, fitStitches, lengthOf, TOLERANCE } from './fit.ts';
export { type Formula, type FormulaNode, readFormula } from './formula.ts';
export { formulasOf, type LineValue, type SizeResult } from './lines.ts';
export { type OrderFact, orderFacts } from './order.ts';
export { namesLine, renamedIn } from './rename.ts';
export { evenWords, scheduleWords, sizeList } from './schedule-words.ts';
export { type Schedule, type SchedulePart, scheduleOf } from './shaping.ts';
export { gradeSheet, type LineResult, lineNamed, type Sheet } from './sheet.ts';
export { type Spread, type SpreadGroup, spreadOf, spreadSum, spreadWords } from './spread.ts';
export type { Amount, Dimension } from './value.ts';
export { foldName, type Vocabulary, vocabularyOf } from './vocabulary.ts';
