/** Tried before any work begins: the first context of a page is slow to open, those after it are not. */
export const canDrawInSpace = (() => {
  const context = document.createElement('canvas').getContext('webgl2');
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
})();
