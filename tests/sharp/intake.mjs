// Taking in a photo of 12 megapixels beside sharp (libvips): the same file, in turns, on this machine.
//
// sharp does all that the core does but straighten, and keeps one picture where the core keeps two: decode, turn upright,
// shrink to 2400 pixels, encode as JPEG of quality 85, make a thumbnail of 320 pixels, hash with SHA-256, write, sync and
// rename. Of two ways to the thumbnail, from the shrunk picture or from the file by libvips' own shrink-on-load, the
// faster is counted. sharp may use as many threads as there are cores; its cache is off, as each photo is taken in once.
//
// usage: INTAKE=PROGRAM node intake.mjs [ROUNDS]        on all cores
//        INTAKE=PROGRAM taskset -c 0 node intake.mjs    on one
//
// PROGRAM is the bench binary of the crate paper, as `cargo bench -p paper --bench intake --no-run` names it; its head
// says what it is asked for here.

import { createHash } from 'node:crypto'
import { closeSync, fsyncSync, mkdtempSync, openSync, readFileSync, renameSync, rmSync, writeSync } from 'node:fs'
import { availableParallelism, tmpdir } from 'node:os'
import { join } from 'node:path'
import { spawn, spawnSync } from 'node:child_process'
import { createInterface } from 'node:readline'
import sharp from 'sharp'

const ROUNDS = Number(process.argv[2] ?? 15)
const WARM_UP = 2
const PROGRAM = process.env.INTAKE
if (!PROGRAM) throw new Error('INTAKE must name the bench binary of the crate paper')

/** The core as one process that takes the photo in for each line it is sent, so that starting it is not measured. */
class Core {
  constructor(photo, folder) {
    this.process = spawn(PROGRAM, ['--beside', photo, folder], { stdio: ['pipe', 'pipe', 'inherit'] })
    this.lines = createInterface({ input: this.process.stdout })[Symbol.asyncIterator]()
  }

  async takeIn() {
    this.process.stdin.write('\n')
    return Number((await this.lines.next()).value)
  }

  /** Milliseconds of all threads so far; fields 14 and 15 of proc_pid_stat(5), in hundredths of a second. */
  work() {
    const fields = readFileSync(`/proc/${this.process.pid}/stat`, 'latin1').replace(/^.*\) /, '').split(' ')
    return (Number(fields[11]) + Number(fields[12])) * 10
  }

  end() {
    this.process.stdin.end()
  }
}

class Sharp {
  constructor(bytes, folder, thumbnailFromFile) {
    Object.assign(this, { bytes, folder, thumbnailFromFile })
  }

  async takeIn() {
    const start = performance.now()
    const { photo, thumbnail } = await (this.thumbnailFromFile ? this.fromFile() : this.fromShrunk())
    const name = createHash('sha256').update(photo).digest('hex')
    this.write(`${name}.thumb.jpg`, thumbnail, false)
    this.write(`${name}.jpg`, photo, true)
    return performance.now() - start
  }

  async fromFile() {
    const [photo, thumbnail] = await Promise.all([jpeg(shrunk(this.bytes)), jpeg(small(sharp(this.bytes).rotate()))])
    return { photo, thumbnail }
  }

  async fromShrunk() {
    const { data, info } = await shrunk(this.bytes).raw().toBuffer({ resolveWithObject: true })
    const again = () => sharp(data, { raw: info })
    const [photo, thumbnail] = await Promise.all([jpeg(again()), jpeg(small(again()))])
    return { photo, thumbnail }
  }

  /** As the core does: the photo is brought to the disk, the thumbnail not, which can be made anew. */
  write(name, bytes, lasting) {
    const file = openSync(join(this.folder, `.${name}`), 'w')
    writeSync(file, bytes)
    if (lasting) fsyncSync(file)
    closeSync(file)
    renameSync(join(this.folder, `.${name}`), join(this.folder, name))
    if (!lasting) return
    const inside = openSync(this.folder, 'r')
    fsyncSync(inside)
    closeSync(inside)
  }

  work() {
    const { user, system } = process.cpuUsage()
    return (user + system) / 1000
  }
}

const shrunk = (bytes) => sharp(bytes).rotate().resize({ width: 2400, height: 2400, fit: 'inside', withoutEnlargement: true })
const small = (picture) => picture.resize({ width: 320, height: 320, fit: 'inside' })
const jpeg = (picture) => picture.jpeg({ quality: 85 }).toBuffer()
const median = (times) => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)]
const shown = ({ times, work }) =>
  `${median(times).toFixed(0)} ms (least ${Math.min(...times).toFixed(0)}), ${(work / times.length).toFixed(0)} ms of work`

const folder = mkdtempSync(join(tmpdir(), 'intake-'))
const photo = join(folder, 'photo.jpg')
spawnSync(PROGRAM, ['--photo', photo], { stdio: 'inherit' })
const bytes = readFileSync(photo)
sharp.cache(false)
sharp.concurrency(availableParallelism())
const core = new Core(photo, join(folder, 'core'))
const sides = {
  'core, straightened as well': core,
  'sharp, thumbnail by shrink-on-load': new Sharp(bytes, folder, true),
  'sharp, thumbnail from the shrunk picture': new Sharp(bytes, folder, false)
}
const results = Object.keys(sides).map(() => ({ times: [], work: 0 }))
for (let round = -WARM_UP; round < ROUNDS; round++) {
  for (const [at, side] of Object.values(sides).entries()) {
    const before = side.work()
    const time = await side.takeIn()
    if (round < 0) continue
    results[at].times.push(time)
    results[at].work += side.work() - before
  }
}
core.end()
rmSync(folder, { recursive: true })

console.log(`${bytes.length} bytes, ${availableParallelism()} core(s), ${ROUNDS} rounds, medians`)
console.log(`sharp ${sharp.versions.sharp}, libvips ${sharp.versions.vips}`)
Object.keys(sides).forEach((name, at) => console.log(`${name}: ${shown(results[at])}`))
const [ours, ...theirs] = results.map(({ times }) => median(times))
console.log(`ratio ${(ours / Math.min(...theirs)).toFixed(2)}`)
