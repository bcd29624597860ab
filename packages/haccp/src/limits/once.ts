/** Each kind once: where several are alike, the last of them stands where the first stood. */
export const once = <Each>(all: readonly Each[], alikeBy: (each: Each) => unknown = (each) => each): Each[] => [
  ...new Map(all.map((each) => [JSON.stringify(alikeBy(each)), each])).values(),
];
