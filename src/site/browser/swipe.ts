// A stroke of a finger across a picture turns to the one beside it.

/** How far a finger goes before it means to turn, in pixels. */
const FAR = 40;

/** Tells of strokes to the left, which ask for what comes after, and to the right. */
export function onSwipe(place: HTMLElement, turn: (way: 'before' | 'after') => void): void {
  let from: PointerEvent | undefined;
  place.addEventListener('pointerdown', (event) => {
    from = event.pointerType !== 'mouse' && event.isPrimary ? event : undefined;
  });
  place.addEventListener('pointercancel', () => {
    from = undefined;
  });
  place.addEventListener('pointerup', (event) => {
    if (from?.pointerId !== event.pointerId) return;
    const [across, down] = [event.clientX - from.clientX, event.clientY - from.clientY];
    from = undefined;
    // On a picture that was drawn closer a stroke moves the picture.
    if ((visualViewport?.scale ?? 1) > 1.01 || Math.abs(across) < Math.max(FAR, Math.abs(down))) return;
    turn(across < 0 ? 'after' : 'before');
  });
}
