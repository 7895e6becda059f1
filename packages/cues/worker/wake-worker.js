// A Worker's timer keeps its pace while a hidden page's own timers are slowed to once a second or once a minute.
// The message is the number of milliseconds between wake-ups; 0 stops them.
let timer = 0;
self.onmessage = (event) => {
  clearInterval(timer);
  if (event.data > 0) timer = setInterval(() => self.postMessage(0), event.data);
};
