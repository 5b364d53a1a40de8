/** What WebGL says draws for it; null where there is none. The probe gives its context back at once. */
export function gpuName(): string | null {
  try {
    const gl = document.createElement('canvas').getContext('webgl');
    if (gl === null) return null;
    const info = gl.getExtension('WEBGL_debug_renderer_info');
    const name: unknown = gl.getParameter(
      info === null ? gl.RENDERER : info.UNMASKED_RENDERER_WEBGL,
    );
    gl.getExtension('WEBGL_lose_context')?.loseContext();
    return String(name);
  } catch {
    return null;
  }
}
