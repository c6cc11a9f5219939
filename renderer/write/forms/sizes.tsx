/** Size by size in the forms over the manuscript: for which sizes something is, and what it comes to in each. */
import { useDeskView } from '../../shell/hooks.ts';
import { formWords } from '../../words/forms.ts';

/** For which sizes something is; null = all. */
export function SizeChoice({
  value,
  onGive,
}: {
  readonly value: readonly string[] | null;
  readonly onGive: (value: readonly string[] | null) => void;
}) {
  const sizes = useDeskView((view) => view.pattern.sizes);
  if (sizes.length < 2) return null;
  const chosen = (id: string) => value === null || value.includes(id);
  const toggle = (id: string) => {
    const next = sizes.map((size) => size.id).filter((other) => (other === id ? !chosen(id) : chosen(other)));
    if (next.length > 0) onGive(next.length === sizes.length ? null : next);
  };
  return (
    <fieldset className="size-choice">
      <legend>{formWords.forSizes}</legend>
      {sizes.map(({ id, label }) => (
        <label key={id}>
          <input type="checkbox" checked={chosen(id)} onChange={() => toggle(id)} /> {label}
        </label>
      ))}
    </fieldset>
  );
}

/** One value a size, under the sizes' labels. */
export function SizeValues({ values }: { readonly values: readonly (string | number | null)[] }) {
  const sizes = useDeskView((view) => view.pattern.sizes);
  const focus = useDeskView((view) => view.reading.size);
  return (
    <dl className="size-values">
      {sizes.map(({ id, label }, at) => (
        <div key={id} data-focus={id === focus ? '' : undefined}>
          <dt>{label}</dt>
          <dd>{values[at] ?? '–'}</dd>
        </div>
      ))}
    </dl>
  );
}
