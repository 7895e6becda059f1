// Hands the microphone's samples to the page in pieces of some twenty milliseconds. Nothing is kept.
const PIECE = 1024;

class ForwardSamples extends AudioWorkletProcessor {
  piece = new Float32Array(PIECE);
  filled = 0;

  process([input]) {
    const samples = input?.[0];
    if (!samples) return true;
    for (const sample of samples) {
      this.piece[this.filled] = sample;
      this.filled += 1;
      if (this.filled === PIECE) {
        this.port.postMessage(this.piece, [this.piece.buffer]);
        this.piece = new Float32Array(PIECE);
        this.filled = 0;
      }
    }
    return true;
  }
}

registerProcessor('forward-samples', ForwardSamples);
