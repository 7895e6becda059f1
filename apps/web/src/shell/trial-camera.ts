/** Canvases that are painted until `stopCameras`. */
const timers = new Set<ReturnType<typeof setInterval>>();

/** A camera for tests: a canvas of 320 x 240 whose colour changes some sixteen times a second. */
export function movingCamera(): MediaStream {
  const canvas = Object.assign(document.createElement('canvas'), { width: 320, height: 240 });
  const context = canvas.getContext('2d');
  let count = 0;
  const paint = () => {
    if (context) context.fillStyle = `rgb(${(count++ * 37) % 255} 90 120)`;
    context?.fillRect(0, 0, canvas.width, canvas.height);
  };
  timers.add(setInterval(paint, 60));
  return canvas.captureStream();
}

/** Ends all of them: for after each test. */
export function stopCameras(): void {
  for (const timer of timers) clearInterval(timer);
  timers.clear();
}
