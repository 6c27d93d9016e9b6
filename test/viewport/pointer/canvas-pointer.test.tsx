import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import {
  type CanvasActions,
  CanvasPointer,
  type Gesture,
} from '../../../src/viewport/pointer/canvas-pointer';

let canvas: HTMLCanvasElement;
let pointer: CanvasPointer;
let said: string[];
const captured = new Set<number>();

function gesture(name: string): Gesture {
  return {
    move: ([x, y]) => said.push(`${name} to ${x},${y}`),
    end: () => said.push(`${name} ends`),
    cancel: () => said.push(`${name} cancelled`),
  };
}

beforeEach(() => {
  vi.useFakeTimers();
  said = [];
  captured.clear();
  canvas = document.createElement('canvas');
  canvas.setPointerCapture = (id) => captured.add(id);
  canvas.hasPointerCapture = (id) => captured.has(id);
  // Giving capture up is announced at once, as a browser may.
  canvas.releasePointerCapture = (id) => {
    captured.delete(id);
    send('lostpointercapture', 0, 0, { pointerId: id });
  };
  const actions: CanvasActions = {
    press: ([x, y]) => {
      said.push(`pressed ${x},${y}`);
      return gesture('drag');
    },
    hold: () => gesture('held'),
    pinch: (middle, moved, factor) => said.push(`pinch ${middle} by ${moved} times ${factor.toFixed(2)}`),
    click: ([x, y]) => said.push(`click ${x},${y}`),
    hover: (pixel) => said.push(`hover ${pixel ?? 'nothing'}`),
    wheel: () => said.push('wheel'),
  };
  pointer = new CanvasPointer(canvas, actions);
});
afterEach(() => {
  pointer.dispose();
  vi.useRealTimers();
});

interface Given {
  readonly pointerId?: number;
  readonly pointerType?: string;
  readonly button?: number;
}

function send(type: string, x: number, y: number, given: Given = {}): void {
  const event = new Event(type, { cancelable: true });
  Object.assign(event, { pointerId: 1, pointerType: 'mouse', button: 0, offsetX: x, offsetY: y, ...given });
  canvas.dispatchEvent(event);
}
const finger = (pointerId: number): Given => ({ pointerId, pointerType: 'touch' });
const pressEscape = () =>
  window.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', cancelable: true }));

describe('the mouse', () => {
  test('a press that hardly moves is a click', () => {
    send('pointerdown', 10, 10);
    send('pointermove', 12, 12);
    send('pointerup', 12, 12);
    expect(said).toEqual(['click 10,10']);
  });

  test('a press that moves is one gesture from where it began, ended once', () => {
    send('pointerdown', 10, 10);
    send('pointermove', 20, 10);
    send('pointermove', 30, 10);
    send('pointerup', 30, 10);
    expect(said).toEqual(['pressed 10,10', 'drag to 20,10', 'drag to 30,10', 'drag ends']);
    expect(captured.size).toBe(0);
  });

  test.each([
    ['Escape', pressEscape],
    ['a cancelled pointer', () => send('pointercancel', 0, 0)],
    ['lost capture', () => send('lostpointercapture', 0, 0)],
    ['a window that loses the focus', () => window.dispatchEvent(new Event('blur'))],
    ['unmounting', () => pointer.dispose()],
  ])('%s cancels the gesture once, and what follows does nothing', (_, interrupt) => {
    send('pointerdown', 10, 10);
    send('pointermove', 20, 10);
    said = [];
    interrupt();
    expect(said).toEqual(['drag cancelled']);
    send('pointerup', 20, 10);
    expect(said).toEqual(['drag cancelled']);
  });

  test('after a cancelled gesture the next one starts afresh', () => {
    send('pointerdown', 10, 10);
    send('pointermove', 20, 10);
    pressEscape();
    send('pointerup', 20, 10);
    said = [];
    send('pointerdown', 50, 50);
    send('pointermove', 60, 50);
    send('pointerup', 60, 50);
    expect(said).toEqual(['pressed 50,50', 'drag to 60,50', 'drag ends']);
  });

  test('Escape is left to others, but for the one that ends a gesture', () => {
    let heard = 0;
    const hear = () => heard++;
    window.addEventListener('keydown', hear);
    pressEscape();
    send('pointerdown', 10, 10);
    send('pointermove', 20, 10);
    pressEscape();
    window.removeEventListener('keydown', hear);
    expect(heard).toBe(1);
    expect(said.at(-1)).toBe('drag cancelled');
  });

  test('another button does not click', () => {
    send('pointerdown', 10, 10, { button: 2 });
    send('pointerup', 10, 10, { button: 2 });
    expect(said).toEqual([]);
  });
});

describe('fingers', () => {
  test('one held still takes up what is under it, and then moves that', () => {
    send('pointerdown', 10, 10, finger(1));
    vi.advanceTimersByTime(500);
    send('pointermove', 40, 10, finger(1));
    send('pointerup', 40, 10, finger(1));
    expect(said).toEqual(['held to 40,10', 'held ends']);
  });

  test('one that moves at once does not', () => {
    send('pointerdown', 10, 10, finger(1));
    send('pointermove', 40, 10, finger(1));
    vi.advanceTimersByTime(500);
    send('pointerup', 40, 10, finger(1));
    expect(said).toEqual(['pressed 10,10', 'drag to 40,10', 'drag ends']);
  });

  test('a second one undoes what the first began and pinches', () => {
    send('pointerdown', 100, 100, finger(1));
    send('pointermove', 120, 100, finger(1));
    send('pointerdown', 200, 100, finger(2));
    send('pointermove', 280, 100, finger(2));
    expect(said.slice(2)).toEqual(['drag cancelled', 'pinch 200,100 by 40,0 times 0.50']);
    send('pointerup', 280, 100, finger(2));
    send('pointerup', 120, 100, finger(1));
    send('pointerdown', 10, 10, finger(1));
    send('pointerup', 10, 10, finger(1));
    expect(said.at(-1)).toBe('click 10,10');
  });
});
