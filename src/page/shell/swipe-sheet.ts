/** A finger moves the sheet, and a tap selects: the grid would take a swipe for a selection. */

/** Pixels that a finger may stray and still tap. */
const TAP_PIXELS = 8;

interface Touch {
  readonly id: number;
  readonly target: EventTarget;
  readonly down: PointerEvent;
  x: number;
  y: number;
  isSwipe: boolean;
}

/**
 * Touches on the sheet are held back until it is known what they are: a swipe is handed on as a turned
 * wheel, a tap as it came. Mouse and pen go on as ever.
 */
export function swipeSheet(place: HTMLElement): void {
  let touch: Touch | undefined;
  const hold = (event: Event): void => {
    event.stopImmediatePropagation();
    event.preventDefault();
  };
  const isOurs = (event: PointerEvent): boolean =>
    event.isTrusted && event.pointerType === 'touch' && event.target instanceof HTMLCanvasElement;
  const listen = (kind: string, hear: (event: PointerEvent) => void): void =>
    place.addEventListener(
      kind,
      (event) => {
        if (event instanceof PointerEvent && isOurs(event)) hear(event);
      },
      { capture: true },
    );
  listen('pointerdown', (event) => {
    hold(event);
    const { pointerId: id, clientX: x, clientY: y, target } = event;
    touch = target === null ? undefined : { id, target, down: event, x, y, isSwipe: false };
  });
  listen('pointermove', (event) => {
    if (touch?.id !== event.pointerId) return;
    hold(event);
    const [right, down] = [event.clientX - touch.x, event.clientY - touch.y];
    if (!touch.isSwipe && Math.hypot(right, down) < TAP_PIXELS) return;
    Object.assign(touch, { isSwipe: true, x: event.clientX, y: event.clientY });
    touch.target.dispatchEvent(
      new WheelEvent('wheel', {
        deltaX: -right,
        deltaY: -down,
        clientX: event.clientX,
        clientY: event.clientY,
        bubbles: true,
        cancelable: true,
      }),
    );
  });
  listen('pointerup', (event) => {
    if (touch?.id !== event.pointerId) return;
    hold(event);
    const { target, down, isSwipe } = touch;
    touch = undefined;
    if (isSwipe) return;
    target.dispatchEvent(copyOf(down, 'pointerdown'));
    target.dispatchEvent(copyOf(event, 'pointerup'));
  });
  listen('pointercancel', () => {
    touch = undefined;
  });
}

function copyOf(event: PointerEvent, kind: string): PointerEvent {
  const { pointerId, pointerType, clientX, clientY, button, buttons, isPrimary, detail } = event;
  const more = { bubbles: true, cancelable: true, composed: true };
  const given = { pointerId, pointerType, clientX, clientY, button, buttons, isPrimary, detail };
  return new PointerEvent(kind, { ...given, ...more });
}
