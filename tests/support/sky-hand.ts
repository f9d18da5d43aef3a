import { expect, type Page } from '@playwright/test';
import { signpostDirections } from '../../components/sky/directions';
import { firstLookAltitudeDeg } from '../../components/sky/fullest-side';
import { positionInWords } from '../../components/sky/position-words';
import { projectToScreen } from '../../components/sky/project';
import { stepShare } from '../../components/sky/sky-controls';
import { SkyView } from '../../components/sky/sky-view';

type Placed = { azimuthDeg: number; altitudeDeg: number };

const buttons = { right: 'Look right', left: 'Look left', up: 'Look up', down: 'Look down' };

/**
 * A hand on the drawn sky: turns it with its buttons until a light is in view, and presses on the
 * light. It is told where the sky starts and keeps count of its own turns, as a person sees them.
 */
export class SkyHand {
  readonly #page: Page;
  readonly #view: SkyView;

  /** `start`: where the sky faces when the lab opens. */
  constructor(page: Page, start: Placed) {
    this.#page = page;
    this.#view = new SkyView(start);
    this.#view.preferLessMotion(true);
  }

  /** Reads off the sky, just opened, towards which signpost it faces. */
  static async readingWhereItFaces(page: Page): Promise<SkyHand> {
    const told = await page.getByText(/^Looking /).innerText();
    const signpost = signpostDirections.find(({ word }) => told.startsWith(`Looking ${word},`));
    if (signpost === undefined) throw new Error(`"${told}" names no signpost`);
    return new SkyHand(page, {
      azimuthDeg: signpost.azimuthDeg,
      altitudeDeg: firstLookAltitudeDeg,
    });
  }

  /** Presses on a light in the picture and waits until the panel tells where it stands. */
  async pick(light: Placed): Promise<void> {
    await this.#turnTowards(light);
    const sky = this.#page.getByRole('application', { name: /^The sky\./ });
    const told = this.#page.getByRole('region', { name: 'The light you picked' });
    const words = new RegExp(positionInWords(light.azimuthDeg, light.altitudeDeg), 'i');
    // A press counts for the sky as it is drawn: the frame after the last turn may be on its way.
    await expect(async () => {
      const box = await sky.boundingBox();
      if (box === null) throw new Error('the sky is not on the page');
      this.#view.resize(box.width, box.height);
      const at = projectToScreen(this.#view, light.azimuthDeg, light.altitudeDeg);
      if (at === null) throw new Error('the light is behind the viewer');
      await this.#page.mouse.click(box.x + at.x, box.y + at.y);
      await expect(told).toContainText(words, { timeout: 2000 });
    }).toPass({ timeout: 30_000 });
  }

  async #turnTowards(light: Placed): Promise<void> {
    const step = this.#view.wanted().fieldDeg * stepShare;
    // A turn of less than half a step is left to the width of the picture.
    const aside = ((light.azimuthDeg - this.#view.wanted().azimuthDeg + 540) % 360) - 180;
    const above = light.altitudeDeg - this.#view.wanted().altitudeDeg;
    const toRight = Math.round(aside / step);
    const upwards = Math.round(above / step);
    await this.#press(toRight > 0 ? 'right' : 'left', Math.abs(toRight));
    await this.#press(upwards > 0 ? 'up' : 'down', Math.abs(upwards));
    this.#view.turnBy(toRight * step, upwards * step);
    // Where motion is reduced a turn is done in one frame.
    this.#view.step(1);
  }

  async #press(way: keyof typeof buttons, times: number): Promise<void> {
    const button = this.#page.getByRole('button', { name: buttons[way] });
    for (let press = 0; press < times; press += 1) await button.click();
  }
}
