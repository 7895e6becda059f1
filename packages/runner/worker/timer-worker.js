// A hidden page's own timers are slowed to once a second, later to once a minute; a Worker's keep their pace.
// A message asks for one answer after a number of milliseconds; the answer carries the same id.
self.onmessage = ({ data: { id, ms } }) => {
  setTimeout(() => self.postMessage(id), ms);
};
