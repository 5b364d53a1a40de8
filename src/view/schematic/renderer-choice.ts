export type RendererKind = 'canvas' | 'webgl';

/**
 * Software WebGL draws this scene ten times slower than a 2D canvas does, and names
 * itself; what it calls itself is the only way to tell.
 */
const SOFTWARE = /swiftshader|llvmpipe|softpipe|software|basic render|virgl|svga3d/i;

/** @param gpuName what WebGL says draws for it; null where there is no WebGL */
export function rendererFor(gpuName: string | null): RendererKind {
  return gpuName === null || gpuName === '' || SOFTWARE.test(gpuName) ? 'canvas' : 'webgl';
}
