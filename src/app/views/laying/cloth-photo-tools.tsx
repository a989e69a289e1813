import type { UseId } from '../../../core/laying/index.ts';
export function ClothPhotoTools({ use: _use }: { readonly use: UseId }) {
  return null;
}
