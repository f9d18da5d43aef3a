import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useReducer } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { changeHorizon, horizonHistory } from './horizon-history';
import { HorizonEditor } from './horizon-editor';

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

const start = [
  { azimuthDeg: 40, altitudeDeg: 10 },
  { azimuthDeg: 120, altitudeDeg: 30 },
  { azimuthDeg: 300, altitudeDeg: 5 },
];

function Editor() {
  const [history, change] = useReducer(changeHorizon, start, horizonHistory);
  return (
    <HorizonEditor
      history={history}
      lowestAltitudeDeg={20}
      highestAltitudeDeg={70}
      onChange={change}
    />
  );
}

const handle = (number: number) => screen.getByRole('slider', { name: `Point ${number}` });
const where = (number: number) => handle(number).getAttribute('aria-valuetext');

describe('the horizon editor', () => {
  it('moves a point with the arrow keys, by 1° or with Shift by 5°', async () => {
    const user = userEvent.setup();
    render(<Editor />);
    handle(2).focus();
    await user.keyboard('{ArrowRight}{ArrowUp}{Shift>}{ArrowUp}{/Shift}');
    expect(where(2)).toBe('azimuth 121°, altitude 36°');
  });

  it('moves a point by dragging it on the panorama', () => {
    // jsdom lays nothing out: the panorama is given its drawing's own size, two pixels a degree.
    vi.spyOn(SVGElement.prototype, 'getBoundingClientRect').mockReturnValue(
      new DOMRect(0, 0, 720, 142),
    );
    SVGElement.prototype.setPointerCapture = vi.fn();
    render(<Editor />);
    fireEvent.pointerDown(handle(2), { button: 0, pointerId: 1, clientX: 240, clientY: 60 });
    fireEvent.pointerMove(handle(2), { pointerId: 1, clientX: 260, clientY: 80 });
    fireEvent.pointerMove(handle(2), { pointerId: 1, clientX: 280, clientY: 100 });
    fireEvent.pointerUp(handle(2), { pointerId: 1 });
    expect(where(2)).toBe('azimuth 140°, altitude 10°');
    fireEvent.click(screen.getByRole('button', { name: 'Undo' }));
    expect(where(2)).toBe('azimuth 120°, altitude 30°');
  });

  it('stops at a neighbour and says which one', async () => {
    const user = userEvent.setup();
    render(<Editor />);
    handle(1).focus();
    await user.keyboard('{Shift>}{ArrowRight>16/}{/Shift}');
    expect(where(1)).toBe('azimuth 119°, altitude 10°');
    expect(screen.getByRole('status').textContent).toContain(
      'Point 1 cannot pass point 2 at azimuth 120°',
    );
  });

  it('refuses a typed azimuth that crosses a neighbour, and keeps what was typed', async () => {
    const user = userEvent.setup();
    render(<Editor />);
    await user.click(screen.getByText('Points as numbers'));
    const azimuth = screen.getByLabelText('Point 3, azimuth in degrees');
    await user.clear(azimuth);
    await user.type(azimuth, '100{Enter}');
    expect(screen.getByRole('alert').textContent).toContain('Point 3 cannot pass point 2');
    expect(azimuth).toHaveProperty('value', '100');
    expect(where(3)).toBe('azimuth 300°, altitude 5°');
  });

  it('takes a typed number with a decimal comma', async () => {
    const user = userEvent.setup();
    render(<Editor />);
    await user.click(screen.getByText('Points as numbers'));
    const altitude = screen.getByLabelText('Point 3, altitude in degrees');
    await user.clear(altitude);
    await user.type(altitude, '7,5{Enter}');
    expect(where(3)).toBe('azimuth 300°, altitude 7.5°');
  });

  it('adds, removes and undoes without a pointer', async () => {
    const user = userEvent.setup();
    render(<Editor />);
    await user.click(screen.getByRole('button', { name: 'Add a point' }));
    expect(screen.getAllByRole('slider')).toHaveLength(4);
    handle(1).focus();
    await user.keyboard('{Delete}');
    expect(screen.getAllByRole('slider')).toHaveLength(3);
    await user.click(screen.getByRole('button', { name: 'Undo' }));
    await user.click(screen.getByRole('button', { name: 'Undo' }));
    expect(screen.getAllByRole('slider')).toHaveLength(3);
    expect(where(1)).toBe('azimuth 40°, altitude 10°');
  });

  it('says that a skyline without points is level', async () => {
    const user = userEvent.setup();
    render(<Editor />);
    await user.click(screen.getByText('Points as numbers'));
    const table = screen.getByRole('table');
    for (let left = 3; left > 0; left -= 1) {
      await user.click(within(table).getAllByRole('button')[0] ?? table);
    }
    expect(screen.getByText(/level, 0° all round/)).toBeTruthy();
  });
});
