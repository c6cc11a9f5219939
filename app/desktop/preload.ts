/** Puts the bridge on the page, and nothing else. It runs sandboxed, in a world of its own. */
import { contextBridge, ipcRenderer } from 'electron';
import { pageBridge } from './page-bridge.ts';

contextBridge.exposeInMainWorld('turnchain', pageBridge(ipcRenderer));
