const TONE_HZ = 880; // heard over a fan
const BEEPS = 3;
const BEEP_S = 0.14;
const GAP_S = 0.1;
const LOUD = 0.25;

let sound: AudioContext | null = null;

/** Browsers allow sound only after a press: called at the first one. */
export function allowSound(): void {
  if (sound === null && typeof AudioContext !== 'undefined') sound = new AudioContext();
  if (sound?.state === 'suspended') void sound.resume();
}

/** Three short tones; nothing where sound is not allowed or not there. */
export function beep(): void {
  if (sound === null || sound.state !== 'running') return;
  for (let index = 0; index < BEEPS; index += 1) {
    const tone = sound.createOscillator();
    const level = sound.createGain();
    const from = sound.currentTime + index * (BEEP_S + GAP_S);
    tone.type = 'square';
    tone.frequency.value = TONE_HZ;
    level.gain.value = LOUD;
    tone.connect(level).connect(sound.destination);
    tone.start(from);
    tone.stop(from + BEEP_S);
  }
}
