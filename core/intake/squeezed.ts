/** Words from which some were taken out, without the signs and gaps that those leave behind. */
export const squeezed = (words: string): string =>
  words
    .replace(/\(\s*[,;/|–-]*\s*\)|\[\s*[,;/|–-]*\s*\]/gu, ' ')
    .replace(/\s*[,;]\s*(?=[)\]])/gu, '')
    .replace(/\s+([,.;:)\]])/gu, '$1')
    .replace(/([([])\s+/gu, '$1')
    .replace(/\s{2,}/gu, ' ')
    .replace(/,(?:\s*,)+/gu, ',')
    .replace(/^[\s,.;:/=()–—-]+(?<!\()|[\s,.;:/=(–—-]+$/gu, '')
    .trim();
