/** A temperature as somebody reads it: minutes since the stage began, °F. */
export type Curve = [minute: number, fahrenheit: number][];

type Chill = { from: number; around: number; perMinute: number; every: number; until: number };

/** A chill that falls towards the air around it; read every few minutes until it is cold. For the demonstration only. */
export function chill({ from, around, perMinute, every, until }: Chill): Curve {
  const curve: Curve = [];
  for (let minute = 0; ; minute += every) {
    const fahrenheit = Math.round((around + (from - around) * Math.exp(-perMinute * minute)) * 10) / 10;
    curve.push([minute, fahrenheit]);
    if (fahrenheit <= until) return curve;
  }
}

/** What a logger sends, one value every two hours. */
export const everyTwoHours = (fahrenheit: number[]): Curve => fahrenheit.map((value, index) => [index * 120, value]);
