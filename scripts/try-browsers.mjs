// What makes journeys cheaper or more of them possible, where Debian's packages can be installed. Without it they say so and pass.
import { tryFirefox, tryNginx, tryShell, tryWebkit } from './prepare.mjs';

tryShell();
tryFirefox();
tryWebkit();
tryNginx();
