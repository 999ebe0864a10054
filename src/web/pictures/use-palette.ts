import { useEffect, useState } from 'react';
import type { InkName, Palette } from '../../documents/pictures/svg.ts';
import { palettes } from '../../documents/pictures/svg.ts';

const names = Object.keys(palettes.day) as InkName[];

function read(): Palette {
  const style = getComputedStyle(document.documentElement);
  const value = (name: InkName) => style.getPropertyValue(`--${name}`).trim() || palettes.day[name];
  return Object.fromEntries(names.map((name) => [name, value(name)])) as Palette;
}

/** The look's colours as values, for a canvas, which knows no variables; follows a change of theme. */
export function usePalette(): Palette {
  const [palette, setPalette] = useState(read);
  useEffect(() => {
    const again = () => setPalette(read());
    const watch = new MutationObserver(again);
    watch.observe(document.documentElement, {
      attributes: true,
      attributeFilter: ['data-theme', 'class', 'style'],
    });
    const dark = matchMedia('(prefers-color-scheme: dark)');
    dark.addEventListener('change', again);
    return () => {
      watch.disconnect();
      dark.removeEventListener('change', again);
    };
  }, []);
  return palette;
}
