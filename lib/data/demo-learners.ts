/** How an invented student has worked through the lessons' questions, from the first lesson on. */
export type DemoLearner = {
  /** So many lessons to the end: three passed in a row. */
  finished: number;
  /** Answers of the lesson that is under way: '+' right, '-' wrong; empty: none is. */
  underWay: string;
  /** So many reviews at their time, as far as they have come due. */
  reviews: 0 | 1 | 2 | 3;
  /** Lessons, from 0, of which the first review alone was done, so that one is due whatever was asked. */
  lapsed?: readonly number[];
  /** Lessons, from 0, where the first answer was wrong. */
  stumbles: readonly number[];
};

/** By the roster's order. */
export const learners: readonly DemoLearner[] = [
  { finished: 9, underWay: '++', reviews: 3, stumbles: [6] },
  { finished: 7, underWay: '-+', reviews: 3, stumbles: [2, 5] },
  { finished: 3, underWay: '--', reviews: 1, stumbles: [0, 1, 2] },
  { finished: 6, underWay: '+', reviews: 2, stumbles: [] },
  { finished: 5, underWay: '+-+', reviews: 3, lapsed: [1, 3], stumbles: [3] },
  { finished: 4, underWay: '', reviews: 0, stumbles: [1] },
  { finished: 0, underWay: '+', reviews: 0, stumbles: [] },
  { finished: 2, underWay: '-', reviews: 0, stumbles: [0] },
  { finished: 8, underWay: '+', reviews: 3, stumbles: [] },
  { finished: 0, underWay: '', reviews: 0, stumbles: [] },
  { finished: 5, underWay: '-+', reviews: 1, stumbles: [4] },
  { finished: 1, underWay: '++', reviews: 0, stumbles: [] },
];

/** The class took a lesson every third day, the first one so many days ago. */
export const lessonDaysAgo = (index: number): number => 33.1 - 3 * index;
