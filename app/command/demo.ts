/** `npm run demo`: exports every example, US and UK, and tells where the PDFs are. */
import { join, relative } from 'node:path';
import { examine } from '../services/examine.ts';
import { exportPattern } from '../services/export.ts';
import { openPattern } from '../services/files.ts';
import { examples, packageFolder } from '../services/resources.ts';

const folder = join(packageFolder(), 'out', 'demo');
const all = examples();
console.log(`Exporting ${all.length} example patterns in US and UK terms …\n`);
for (const { name, path } of all) {
  const opened = await openPattern(path);
  if (!opened.ok) {
    console.error(`${name}: ${opened.error.message}`);
    process.exitCode = 1;
    continue;
  }
  const { pattern, study, findings } = examine(opened.document);
  const wrong = findings.filter(({ severity }) => severity === 'error').length;
  const { files, stopped } = await exportPattern(study, opened.media, folder, {
    terms: ['us', 'uk'],
    papers: ['a4'],
    editions: ['standard'],
    sizes: [null],
  });
  console.log(`${pattern.about.title}, ${pattern.sizes.length} sizes${wrong > 0 ? `, ${wrong} errors` : ''}`);
  for (const { path: at, pages } of files) console.log(`  ${relative(process.cwd(), at)}  ${pages} pages`);
  if (stopped !== null || wrong > 0) process.exitCode = 1;
  if (stopped !== null && stopped !== 'interrupted') console.error(`  ${stopped.message}`);
}
console.log(`\nAll are in ${folder}`);
