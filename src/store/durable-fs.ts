/**
 * The embedded database's files, with fsync that reaches the disk. As delivered it never syncs, for three reasons:
 * its default parameters turn fsync off, `fdatasync` is an empty function in its C library, and its file system has no
 * `fsync` operation. The first two are parameters (see `embedded.ts`); the third is mended here.
 */
import fs from 'node:fs';
import { NodeFS } from '@electric-sql/pglite/nodefs';

interface EmscriptenNode {
  readonly parent: EmscriptenNode;
  readonly name: string;
}
interface EmscriptenStream {
  readonly nfd?: number | null;
  readonly node: EmscriptenNode;
}
interface NodeFsModule {
  readonly NODEFS: {
    realPath(node: EmscriptenNode): string;
    stream_ops: { fsync?: (stream: EmscriptenStream) => number };
  };
}

export class DurableNodeFS extends NodeFS {
  /** Files synced since opening; a commit must make it grow. */
  syncs = 0;

  override async init(...given: Parameters<NodeFS['init']>): ReturnType<NodeFS['init']> {
    const ready = await super.init(...given);
    const { emscriptenOpts } = ready;
    emscriptenOpts.preRun = [
      ...(emscriptenOpts.preRun ?? []),
      (module: unknown) => {
        const { NODEFS } = module as NodeFsModule;
        NODEFS.stream_ops.fsync = (stream) => {
          if (stream.nfd !== undefined && stream.nfd !== null) fs.fdatasyncSync(stream.nfd);
          else syncPath(NODEFS.realPath(stream.node));
          this.syncs++;
          return 0;
        };
      },
    ];
    return ready;
  }
}

/** Makes one file or folder durable. */
export function syncPath(path: string): void {
  const fd = fs.openSync(path, 'r');
  try {
    fs.fsyncSync(fd);
  } finally {
    fs.closeSync(fd);
  }
}

/** Makes a whole folder durable, deepest first, and closes it to everybody but its owner. */
export function settleTree(folder: string): void {
  for (const entry of fs.readdirSync(folder, { withFileTypes: true })) {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) settleTree(path);
    else if (entry.isFile()) {
      fs.chmodSync(path, 0o600);
      syncPath(path);
    }
  }
  fs.chmodSync(folder, 0o700);
  syncPath(folder);
}
