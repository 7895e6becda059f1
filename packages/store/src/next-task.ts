/**
 * Lets the page do what waits: draw, hear a press. A message, as timers wait longer and stop in a hidden page.
 * @returns when the page has had its turn
 */
export function nextTask(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });
}
