/**
 * A full complex matrix, row by row: what the elimination of the source is held against.
 */
export interface ComplexMatrix {
  readonly nodes: number;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export interface Phasors {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/**
 * Solves (G + jB)·v = i for a real right side, by Gaussian elimination with row pivoting. Only a
 * meter asks for it, so the full matrix and a fresh copy each time are cheap enough. Overwrites the
 * matrix.
 */
export function solvePhasors({ nodes: n, re, im }: ComplexMatrix, currents: Float64Array): Phasors {
  const vr = Float64Array.from(currents);
  const vi = new Float64Array(n);
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let r = k + 1; r < n; r++) {
      if (size(re, im, r * n + k) > size(re, im, pivot * n + k)) pivot = r;
    }
    if (pivot !== k) {
      for (let c = k; c < n; c++) swap(re, k * n + c, pivot * n + c);
      for (let c = k; c < n; c++) swap(im, k * n + c, pivot * n + c);
      swap(vr, k, pivot);
      swap(vi, k, pivot);
    }
    const dr = re[k * n + k] as number;
    const di = im[k * n + k] as number;
    const scale = 1 / (dr * dr + di * di);
    for (let r = k + 1; r < n; r++) {
      const ar = re[r * n + k] as number;
      const ai = im[r * n + k] as number;
      if (ar === 0 && ai === 0) continue;
      const fr = (ar * dr + ai * di) * scale;
      const fi = (ai * dr - ar * di) * scale;
      for (let c = k + 1; c < n; c++) {
        const br = re[k * n + c] as number;
        const bi = im[k * n + c] as number;
        if (br === 0 && bi === 0) continue;
        re[r * n + c] = (re[r * n + c] as number) - (fr * br - fi * bi);
        im[r * n + c] = (im[r * n + c] as number) - (fr * bi + fi * br);
      }
      const wr = vr[k] as number;
      const wi = vi[k] as number;
      vr[r] = (vr[r] as number) - (fr * wr - fi * wi);
      vi[r] = (vi[r] as number) - (fr * wi + fi * wr);
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    let sr = vr[k] as number;
    let si = vi[k] as number;
    for (let c = k + 1; c < n; c++) {
      const ar = re[k * n + c] as number;
      const ai = im[k * n + c] as number;
      sr -= ar * (vr[c] as number) - ai * (vi[c] as number);
      si -= ar * (vi[c] as number) + ai * (vr[c] as number);
    }
    const dr = re[k * n + k] as number;
    const di = im[k * n + k] as number;
    const scale = 1 / (dr * dr + di * di);
    vr[k] = (sr * dr + si * di) * scale;
    vi[k] = (si * dr - sr * di) * scale;
  }
  return { re: vr, im: vi };
}

function size(re: Float64Array, im: Float64Array, i: number): number {
  return Math.abs(re[i] as number) + Math.abs(im[i] as number);
}

function swap(values: Float64Array, a: number, b: number): void {
  const held = values[a] as number;
  values[a] = values[b] as number;
  values[b] = held;
}
