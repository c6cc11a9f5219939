/** A field of the pattern's own words: shown converted, and not typed in, while reading in the other terms. */
import { DraftField, type DraftFieldProps } from '../parts/fields.tsx';
import { useReader } from '../shell/reader.ts';

/** Longest name that a document holds; see the limits of values. */
const NAME = 200;

export function WordsField({
  kind = 'prose',
  most = NAME,
  onGive,
  value,
  ...rest
}: Omit<DraftFieldProps, 'onGive'> & {
  readonly kind?: 'row' | 'prose';
  readonly most?: number;
  readonly onGive: (words: string) => boolean;
}) {
  const { say, isOther } = useReader();
  return (
    <DraftField
      {...rest}
      className={`wide ${rest.className ?? ''}`}
      value={isOther ? say(value, kind) : value}
      readOnly={isOther}
      onGive={(typed) => !isOther && onGive(typed.trim().slice(0, most))}
    />
  );
}
