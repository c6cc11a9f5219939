/** The place "Workbook": the maker's own records, and what follows from them. */
import { useEffect, useState } from 'react';
import { TellContext } from '../materials/list.tsx';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { PLACE_WORDS } from '../words/shell.ts';
import { workbookWords } from '../words/workbook.ts';
import { Estimates } from './estimates.tsx';
import { Makings } from './makings.tsx';
import { People } from './people.tsx';
import { Pricing } from './pricing.tsx';

export function WorkbookPlace() {
  const desk = useDesk();
  const person = useDeskView((view) => view.reading.person);
  const [told, setTold] = useState('');
  useEffect(() => {
    desk.watch({ workbook: true, person });
    return () => desk.watch({});
  }, [desk, person]);
  return (
    <TellContext value={setTold}>
      <div className="materials workbook">
        <h2 className="unseen">{PLACE_WORDS.workbook}</h2>
        <p className="quiet">{workbookWords.intro}</p>
        <Makings />
        <Estimates />
        <Pricing />
        <People />
      </div>
      <p role="status" className={told === '' ? 'unseen' : 'materials-told'}>
        {told}
      </p>
    </TellContext>
  );
}
