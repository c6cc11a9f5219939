/** The place "Materials": what the pattern is made with, as forms. */
import { useState } from 'react';
import { useReader } from '../shell/reader.ts';
import { materialsWords } from '../words/materials.ts';
import { PLACE_WORDS } from '../words/shell.ts';
import { About } from './about.tsx';
import { Gauges } from './gauges.tsx';
import { TellContext } from './list.tsx';
import { Notions } from './notions.tsx';
import { Abbreviations, Cautions, Specials } from './words-lists.tsx';
import { Hooks, Yarns } from './yarns.tsx';

export function MaterialsPlace() {
  const [told, setTold] = useState('');
  const { isOther, terms } = useReader();
  return (
    <TellContext value={setTold}>
      <div className="materials">
        <h2 className="unseen">{PLACE_WORDS.materials}</h2>
        {isOther && <p className="quiet">{materialsWords.inOther(terms)}</p>}
        <About />
        <Gauges />
        <Yarns />
        <Hooks />
        <Notions />
        <Abbreviations />
        <Specials />
        <Cautions />
      </div>
      <p role="status" className={told === '' ? 'unseen' : 'materials-told'}>
        {told}
      </p>
    </TellContext>
  );
}
