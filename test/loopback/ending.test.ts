/** What becomes of a page that goes: what it had is free, its work is offered, and the last one ends the host. */
import fs from 'node:fs';
import { afterEach, expect, test } from 'vitest';
import { type Loopback, startLoopback } from '../../app/loopback/server.ts';
import { FolderService } from '../../app/services/folders.ts';
import { compose } from '../../core/document/compose.ts';
import { enterLoopback, loopbackHost } from '../../renderer/host/loopback.ts';
import { blank } from '../document/containers.ts';
import { until } from '../host/contract.ts';
import { browserFetch, newPlaces, servicesOf, studioFolder } from '../host/worlds.ts';

const places = newPlaces();
const services = servicesOf(places);
let server: Loopback | null = null;
afterEach(async () => {
  await server?.close();
  await services.close();
  fs.rmSync(places.root, { recursive: true, force: true });
});

test('a page that vanishes comes back within its grace, or is given up, and the last one ends the host', async () => {
  let ended = false;
  server = await startLoopback({
    services,
    folders: new FolderService(services.handles, []),
    studio: studioFolder(places.root),
    graceMs: 400,
    emptyMs: 200,
    onEmpty: () => {
      ended = true;
    },
  });
  const origin = `http://127.0.0.1:${server.port}`;
  const browser = browserFetch(origin);
  const secret = (await enterLoopback(origin, new URL(server.invite()).hash.slice(1), browser))!;
  const page = (window: string) =>
    loopbackHost({
      origin,
      secret,
      window,
      fetch: browser,
      chooser: async () => null,
      openAddress: () => undefined,
      closePage: () => undefined,
    });
  const entry = { title: 'Vest', handle: null, stamp: null, document: compose(blank).toJSON() };
  const first = page('windowone');
  expect(await first.keep('desk', entry)).toEqual({ ok: true, value: null });

  // The stream breaks and the same page is there again: nothing was given up.
  first.end();
  const again = page('windowone');
  const other = page('windowtwo');
  await again.start();
  await new Promise((resolve) => setTimeout(resolve, 600));
  expect(await other.recovered()).toEqual([]);

  // It vanishes for good, without a word.
  again.end();
  await new Promise((resolve) => setTimeout(resolve, 800));
  expect(await other.recovered()).toMatchObject([{ desk: 'desk', title: 'Vest' }]);
  expect(ended).toBe(false);

  // The last one says that it leaves; the host ends after a while in which nobody came.
  other.leave();
  other.end();
  await until(() => ended);
});

test('a page whose host is gone is told in a sentence, and keeps its pattern', async () => {
  const gone = loopbackHost({
    origin: 'http://127.0.0.1:9',
    secret: 'x',
    window: 'windowone',
    fetch,
    chooser: async () => null,
    openAddress: () => undefined,
    closePage: () => undefined,
  });
  const saved = await gone.save('handle', new Uint8Array(1), null, '');
  expect(saved).toMatchObject({ ok: false, error: { code: 'host-gone' } });
  const kept = await gone.keep('desk', { title: '', handle: null, stamp: null, document: {} });
  expect(kept).toMatchObject({ ok: false, error: { code: 'host-gone' } });
  gone.end();
});
