'use client';

import { useMemo, useSyncExternalStore } from 'react';
import { routes } from '@/lib/routes';
import type { SignInCard } from '@/lib/data/roster';
import { codeText } from '../class-text';
import styles from './card-sheets.module.css';
import { qrPath } from './qr-path';

/**
 * Cards laid out for paper: two columns that fit A4 and Letter alike within the page's margins,
 * black on white in every theme, with dashed lines to cut along.
 */
export function CardSheets({
  cards,
  perSheet,
}: {
  cards: readonly SignInCard[];
  perSheet: 8 | 10;
}) {
  const address = `${useOrigin()}${routes.signIn.student()}`;
  // The page's address alone: a card's words go into no code that a camera keeps.
  const code = useMemo(() => qrPath(address), [address]);
  const sheets: SignInCard[][] = [];
  for (let from = 0; from < cards.length; from += perSheet)
    sheets.push(cards.slice(from, from + perSheet));
  return (
    <div data-card-sheet="" className="space-y-6 print:space-y-0">
      {sheets.map((sheet, index) => (
        <ul
          key={index}
          className={`${styles.sheet ?? ''} ${perSheet === 8 ? (styles.eight ?? '') : (styles.ten ?? '')}`}
          aria-label={`Sheet ${index + 1} of ${sheets.length}`}
        >
          {sheet.map((card) => (
            <li key={card.studentId} className={styles.card}>
              <p className={styles.head}>
                <span className={styles.name}>{card.displayName}</span>
                <span>{card.className}</span>
              </p>
              <dl className={styles.facts}>
                <div>
                  <dt>Class code</dt>
                  <dd className={styles.code}>{codeText(card.classCode)}</dd>
                </div>
                <div>
                  <dt>Card</dt>
                  <dd className={styles.code}>{card.cardNumber}</dd>
                </div>
                <div className={styles.wide}>
                  <dt>Three words, for you alone</dt>
                  <dd className={styles.words}>{card.words}</dd>
                </div>
              </dl>
              <p className={styles.foot}>
                Duskbench · <span className={styles.address}>{address}</span>
              </p>
              <svg
                aria-hidden="true"
                className={styles.qr}
                viewBox={`0 0 ${code.size} ${code.size}`}
                shapeRendering="crispEdges"
              >
                <path d={code.path} />
              </svg>
            </li>
          ))}
        </ul>
      ))}
    </div>
  );
}

const never = (): (() => void) => () => undefined;
/** Where this page was opened, hence where the students find the sign-in; empty on the server. */
const useOrigin = (): string =>
  useSyncExternalStore(
    never,
    () => window.location.origin,
    () => '',
  );
