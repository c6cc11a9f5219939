/** Names of the channels between a window and the main process, so that both ends say the same. */

export const CHANNELS = {
  /** From the window. */
  CALL: 'turnchain:call',
  PRINT: 'turnchain:print',
  EXPORT: 'turnchain:export',
  STOP: 'turnchain:stop',
  /** To the window. */
  EVENT: 'turnchain:event',
  STEP: 'turnchain:step',
} as const;
