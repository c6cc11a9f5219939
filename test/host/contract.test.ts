/**
 * The one contract of hosts, against all there are: in the process itself, over real HTTP, and behind the
 * desktop's bridge.
 */
import { hostContract } from './contract.ts';
import { bridgedWorld, loopbackWorld, plainWorld } from './worlds.ts';

hostContract('in this process', () => plainWorld());
hostContract('over HTTP on this machine', () => loopbackWorld());
hostContract('behind the desktop’s bridge', () => bridgedWorld());
