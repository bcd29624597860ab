/** Of alike ones the last, in the place of the first. */
export const once = <Each>(all: readonly Each[], alikeBy: (each: Each) => unknown = (each) => each): Each[] => [
  ...new Map(all.map((each) => [JSON.stringify(alikeBy(each)), each])).values(),
];
