import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freePort } from '../free-port.ts';

const conf = new URL('../../packages/box/nginx/larkhold-box.conf', import.meta.url);
/** Debian puts it where a user's PATH does not look. */
const programs = ['nginx', '/usr/sbin/nginx'];

/** A real nginx on a loopback port, with the file that clubs use. */
export interface TrialNginx {
  /** Where boxes are hosted: `http://127.0.0.1:…/box`. */
  address: string;
  origin: string;
  /** The folder on the disk. */
  folder: string;
  close(): Promise<void>;
}

/**
 * Starts nginx.
 * @param more lines for its server block: where the app lies, or what goes wrong.
 * @returns it, answering; undefined where there is none on this machine.
 */
export async function startNginx(more = ''): Promise<TrialNginx | undefined> {
  const program = programs.find((one) => spawnSync(one, ['-v']).status === 0);
  if (program === undefined) return undefined;
  const folder = await mkdtemp(join(tmpdir(), 'larkhold-box-'));
  await Promise.all(['box', 'coming', 'temp'].map((name) => mkdir(join(folder, name))));
  const port = await freePort();
  const boxes = (await readFile(conf, 'utf8')).replaceAll('/srv/larkhold', folder);
  const temp = ['client_body', 'proxy', 'fastcgi', 'uwsgi', 'scgi'].map(
    (one) => `${one}_temp_path ${folder}/temp/${one};`,
  );
  await writeFile(
    join(folder, 'nginx.conf'),
    `daemon off; pid ${folder}/nginx.pid; error_log ${folder}/error.log; worker_processes 2;
     events { worker_connections 4096; }
     http { access_log off; ${temp.join(' ')} include /etc/nginx/mime.types; keepalive_requests 100000;
       server { listen 127.0.0.1:${port}; ${more} ${boxes} } }`,
  );
  // As root nginx would give its work to another user, who may not write here.
  const user = process.getuid?.() === 0 ? ['-g', 'user root;'] : [];
  const child = spawn(program, ['-p', folder, '-c', join(folder, 'nginx.conf'), ...user], { stdio: 'ignore' });
  const origin = `http://127.0.0.1:${port}`;
  await answering(origin, child);
  return {
    ...{ address: `${origin}/box`, origin, folder },
    close: async () => {
      const ended = new Promise((resolve) => child.once('exit', resolve));
      child.kill('SIGTERM');
      await ended;
      await rm(folder, { recursive: true, force: true });
    },
  };
}

async function answering(origin: string, child: ChildProcess): Promise<void> {
  for (;;) {
    if (child.exitCode !== null) throw new Error(`nginx ended with ${child.exitCode}`);
    const isUp = await fetch(`${origin}/box/`).then(
      () => true,
      () => false,
    );
    if (isUp) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
