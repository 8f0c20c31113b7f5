/** What is said when the server does not take something. */
export const SENDING_WORDS = {
  stoppedNothingThisFileWas: 'Stopped; nothing of this file was kept.',
} as const;
