declare module 'jstat' {
  export const jStat: { readonly normal: { cdf(x: number, mean: number, sigma: number): number } };
}
