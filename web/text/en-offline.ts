/** Words on working without a server, and on newer versions of the page. */
export const offline = {
  starting: 'The server does not answer. This page gets ready to answer by itself…',
  here: (version: string) =>
    `The server does not answer: answers come from this page. Data of version ${version}. What you enter is kept in this browser.`,
  unable:
    'The server does not answer, and this page has no data of its own yet. What is on the bench is kept in this browser; it is asked again when the server is back.',
  noServer: 'The server cannot be reached',
  serverSaid: (status: number) => `The server answered with ${status}`,
  back: 'The server is back: answers come from it again.',
  ready: 'This page is kept in your browser: it answers without a connection too.',
  newer: 'A newer version of this page is ready. What is on the bench stays.',
  takeNewer: 'Load it',
  looseText: 'The field for a recipe holds text that is not on the bench yet and would be lost.',
  takeAnyway: 'Load it anyway',
} as const
