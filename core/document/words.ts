/**
 * Which characters text in a pattern may hold, and what an id looks like. Nothing here reads a meaning.
 */
import { VALUE_LIMITS } from './limits.ts';

/**
 * What is not text: control characters (line breaks and tabs too: a paragraph is a node of its own), halves
 * of a surrogate pair, line separators, the object character (it stands for figures in projected text) and
 * the two non-characters at the end of the plane.
 */
const NOT_TEXT = /[\p{Cc}\p{Cs}\u2028\u2029\uFFFC\uFFFE\uFFFF]/u;
const NOT_TEXT_ALL = new RegExp(NOT_TEXT.source, 'gu');
const BREAKS = /[\t\n\v\f\r\u0085\u2028\u2029]+/gu;

/** Whether every character of `text` may stand in a pattern. */
export function isPlainText(text: string): boolean {
  return !NOT_TEXT.test(text);
}

/** `text` with what is not text taken out; a run of breaks becomes one space. The same string when clean. */
export function tidyText(text: string): string {
  if (isPlainText(text)) return text;
  return text.replace(BREAKS, ' ').replace(NOT_TEXT_ALL, '');
}

const ID = /^[A-Za-z0-9][A-Za-z0-9_-]*$/;

/**
 * Whether `text` may be an id: letters, digits, hyphen, underscore, and not the name of something that every
 * object already has (a table keyed by ids must be empty when it looks empty).
 */
export function isId(text: string): boolean {
  return text.length <= VALUE_LIMITS.id && ID.test(text) && !(text in Object.prototype);
}
