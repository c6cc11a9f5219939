/** The one contract of hosts, against those that run here: in the process itself, and over real HTTP. */
import { hostContract } from './contract.ts';
import { loopbackWorld, plainWorld } from './worlds.ts';

hostContract('in this process', () => plainWorld());
hostContract('over HTTP on this machine', () => loopbackWorld());
