/** Lets a component hand measured lengths to the stylesheet as custom properties. Types only. */
import 'react';

declare module 'react' {
  interface CSSProperties {
    [property: `--${string}`]: string | number | undefined;
  }
}
