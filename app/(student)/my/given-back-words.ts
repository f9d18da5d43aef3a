/** To a student whose work was given back and who may start once more. */
export const givenBackInTime = 'Your teacher has given it back to you: try once more.';

/** The same when nothing can be started any more: giving back does not move the due time. */
export const givenBackTooLate =
  'Your teacher has given it back to you, but the due time is over: ask for more time.';
