/**
 * What differs from day to day though nobody chose it: how long somebody takes, what a display shows, what is trimmed
 * off. The same place in the story always draws the same, so that the story can be told again.
 */
export class Chance {
  private state: number;

  constructor(place: string) {
    this.state = [...place].reduce((sum, letter) => Math.imul(sum ^ letter.charCodeAt(0), 16_777_619) >>> 0, 2_166_136_261);
  }

  /** A number between both, as an instrument or a clock shows it: in whole steps. */
  between(least: number, most: number, step = 1): number {
    const steps = Math.round((most - least) / step);
    return inSteps(least + Math.floor(this.draw() * (steps + 1)) * step, step);
  }

  oneOf<Choice>(choices: readonly [Choice, ...Choice[]]): Choice {
    return choices[Math.floor(this.draw() * choices.length)] ?? choices[0];
  }

  /** Between 0 and 1, by a linear congruence: nothing here needs better. */
  private draw(): number {
    this.state = (Math.imul(this.state, 1_664_525) + 1_013_904_223) >>> 0;
    return ((this.state ^ (this.state >>> 15)) >>> 0) / 4_294_967_296;
  }
}

/** As a display rounds: to its nearest step, without the dust of binary fractions. */
export const inSteps = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(3));
