/** The part of the general statistics package that is used here; the package brings no types. */
declare module 'jstat' {
  const jstat: {
    readonly normal: {
      readonly cdf: (x: number, mean: number, standardDeviation: number) => number;
    };
  };
  export default jstat;
}
