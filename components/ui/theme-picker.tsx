'use client';

import { useState } from 'react';
import { Flame, Moon, Sun } from 'lucide-react';
import { classNames } from './class-names';
import { themeCookieMaxAge, themeCookieName, themeFromText, themes, type Theme } from './theme';

const labels = {
  light: { text: 'Day', hint: 'Paper and ink', Icon: Sun },
  dark: { text: 'Night', hint: 'Dark blue-grey', Icon: Moon },
  'after-dark': {
    text: 'Outdoors',
    hint: 'Red on black, for eyes that are used to the dark',
    Icon: Flame,
  },
} as const;

type ThemePickerProps = {
  /** Null while the device decides. */
  theme: Theme | null;
  /** Stores the choice when the page has no script: the form is sent, and the page comes back in its new look. */
  setTheme: (formData: FormData) => Promise<void>;
};

/** Three looks, one press. With script the change is at once and needs no connection. */
export function ThemePicker({ theme, setTheme }: ThemePickerProps) {
  const [shown, setShown] = useState(theme);
  return (
    <form
      action={setTheme}
      aria-label="Look of the pages"
      onSubmit={(event) => {
        const { submitter } = event.nativeEvent;
        const chosen = themeFromText(
          submitter instanceof HTMLButtonElement ? submitter.value : null,
        );
        if (chosen === null) return;
        event.preventDefault();
        document.documentElement.dataset.theme = chosen;
        const secure = window.location.protocol === 'https:' ? '; secure' : '';
        document.cookie = `${themeCookieName}=${chosen}; path=/; max-age=${String(themeCookieMaxAge)}; samesite=lax${secure}`;
        setShown(chosen);
      }}
      className="flex rounded-md border border-sky-line"
    >
      {themes.map((name) => {
        const { text, hint, Icon } = labels[name];
        const chosen = name === shown;
        return (
          <button
            key={name}
            type="submit"
            name="theme"
            value={name}
            title={hint}
            aria-pressed={chosen}
            className={classNames(
              'inline-flex min-h-(--target-small) min-w-9 items-center justify-center gap-1.5 px-2 text-sm not-first-of-type:border-s not-first-of-type:border-sky-line',
              chosen ? 'bg-on-sky font-semibold text-sky' : 'text-on-sky-soft hover:text-on-sky',
            )}
          >
            <Icon aria-hidden="true" className="size-4" />
            <span className="sr-only xl:not-sr-only">{text}</span>
          </button>
        );
      })}
    </form>
  );
}
