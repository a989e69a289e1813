interface Accessor {
  readonly bufferView: number;
  readonly byteOffset?: number;
  readonly componentType: number;
  readonly count: number;
}

interface GltfJson {
  readonly accessors: readonly Accessor[];
  readonly bufferViews: readonly { readonly byteOffset?: number; readonly byteStride?: number }[];
  readonly meshes: readonly {
    readonly primitives: readonly {
      readonly attributes: Readonly<Record<string, number>>;
      readonly indices: number;
    }[];
  }[];
  readonly nodes: readonly { readonly name: string }[];
  readonly materials: readonly {
    readonly pbrMetallicRoughness: { readonly baseColorFactor?: readonly number[] };
  }[];
}

/**
 * First mesh of a binary glTF, read by hand from the container format (glTF 2.0 §4.4): 12-byte header, JSON chunk,
 * binary chunk.
 */
export function readGlb(bytes: Uint8Array): {
  json: GltfJson;
  positions: Float32Array;
  normals: Float32Array;
  indices: Uint32Array;
} {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (view.getUint32(0, true) !== 0x46546c67) throw new Error('no glTF');
  const jsonLength = view.getUint32(12, true);
  const json: GltfJson = JSON.parse(new TextDecoder().decode(bytes.subarray(20, 20 + jsonLength)));
  const start = 20 + jsonLength + 8;
  const floats = (index: number): Float32Array => {
    const { bufferView, byteOffset = 0, count } = json.accessors[index];
    const { byteOffset: viewOffset = 0, byteStride = 12 } = json.bufferViews[bufferView];
    return Float32Array.from({ length: 3 * count }, (_, i) =>
      view.getFloat32(start + viewOffset + byteOffset + Math.floor(i / 3) * byteStride + (i % 3) * 4, true),
    );
  };
  const primitive = json.meshes[0].primitives[0];
  const { bufferView, byteOffset = 0, count, componentType } = json.accessors[primitive.indices];
  if (componentType !== 5125) throw new Error(`indices are ${componentType}, not unsigned int`);
  const indexStart = start + (json.bufferViews[bufferView].byteOffset ?? 0) + byteOffset;
  return {
    json,
    positions: floats(primitive.attributes.POSITION),
    normals: floats(primitive.attributes.NORMAL),
    indices: Uint32Array.from({ length: count }, (_, i) => view.getUint32(indexStart + 4 * i, true)),
  };
}
