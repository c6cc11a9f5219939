/**
 * JSON from outside, read with care, and JSON for outside, written always the same. It knows nothing of
 * patterns.
 */
import { FILE_LIMITS } from './limits.ts';
import { type Refusal, refuse } from './refusals.ts';
import { tidyText } from './words.ts';
import { decodeUtf8 } from './zip.ts';

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

export type Parsed =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly error: Refusal };

/** Names that reach into the machinery of objects when they are used as keys. */
const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype']);

/** Deepest nesting of brackets outside strings; found without building anything. */
function depthOf(text: string): number {
  let depth = 0;
  let deepest = 0;
  let inString = false;
  for (let at = 0; at < text.length; at++) {
    const char = text[at];
    if (inString) {
      if (char === '\\') at += 1;
      else if (char === '"') inString = false;
    } else if (char === '"') {
      inString = true;
    } else if (char === '{' || char === '[') {
      depth += 1;
      deepest = Math.max(deepest, depth);
    } else if (char === '}' || char === ']') {
      depth -= 1;
    }
  }
  return deepest;
}

function forbiddenKey(root: unknown): string | null {
  const waiting: unknown[] = [root];
  while (waiting.length > 0) {
    const value = waiting.pop();
    if (typeof value !== 'object' || value === null) continue;
    if (!Array.isArray(value)) {
      const found = Object.keys(value).find((key) => FORBIDDEN.has(key));
      if (found !== undefined) return found;
    }
    for (const part of Object.values(value)) waiting.push(part);
  }
  return null;
}

/** The value that UTF-8 JSON stands for, or why it is refused: not JSON, too deep, keys with a hidden meaning. */
export function parseJson(bytes: Uint8Array): Parsed {
  const text = decodeUtf8(bytes);
  if (text === null) return { ok: false, error: refuse('unreadable-text') };
  if (depthOf(text) > FILE_LIMITS.jsonDepth) {
    return { ok: false, error: refuse('nested-too-deep', FILE_LIMITS.jsonDepth) };
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { ok: false, error: refuse('unreadable-text') };
  }
  const key = forbiddenKey(value);
  return key === null ? { ok: true, value } : { ok: false, error: refuse('forbidden-key', key) };
}

/** A copy with keys in alphabetical order and strings without characters that are not text. */
export function canonical(value: Json): Json {
  if (typeof value === 'string') return tidyText(value);
  if (typeof value !== 'object' || value === null) return value;
  if (isList(value)) return value.map(canonical);
  const keys = Object.keys(value).sort();
  return Object.fromEntries(keys.map((key) => [key, canonical(value[key]!)]));
}

function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}
