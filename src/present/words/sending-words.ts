type Shown = string | number | undefined;

/** What is said when the server does not take something. */
export const SENDING_WORDS = {
  stoppedNothingThisFileWas: 'Stopped; nothing of this file was kept.',
  serverWentAwayBeforeIt: 'The server went away before it was done; nothing was kept.',
  serverDoesNotAnswerWhat: 'The server does not answer. What was typed is kept in this page and sent when it answers again.',
  theServerAnswered: (status: Shown): string => `The server answered ${status}.`,
} as const;
