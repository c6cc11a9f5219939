/** A process that takes claims for a test: a line in names a thing, a line out says whether it has it. */
import { createInterface } from 'node:readline';
import { Claims } from '../../app/services/claims.ts';

const [folder, window] = process.argv.slice(2);
const claims = new Claims({ folder: folder!, window: window! });
process.stdout.write('ready\n');
for await (const thing of createInterface({ input: process.stdin })) {
  process.stdout.write((await claims.take(thing)) ? 'yes\n' : 'no\n');
}
