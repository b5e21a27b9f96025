import { ACCEPT, HEIGHT, LAYERS, TAIL_FROM, WIDTH } from './ziggurat.ts';

const TWO_TO_MINUS_32 = 2 ** -32;

export type RandomState = readonly [number, number, number, number];

/**
 * A stream of random numbers that is the same for the same seed on every machine.
 * @source xoshiro128**, Blackman and Vigna, "Scrambled linear pseudorandom number generators";
 * normals by Marsaglia and Tsang, "The ziggurat method for generating random variables", 2000;
 * METHOD W7
 */
export class Random {
	#a: number;
	#b: number;
	#c: number;
	#d: number;

	/** @param state four 32-bit words, not all zero */
	constructor(state: RandomState) {
		if (state.every((word) => (word | 0) === 0))
			throw new RangeError('a state of zeros gives zeros for ever');
		this.#a = state[0] | 0;
		this.#b = state[1] | 0;
		this.#c = state[2] | 0;
		this.#d = state[3] | 0;
	}

	/** The next 32 bits, 0 to 2³² − 1. */
	nextUint32(): number {
		const b = this.#b;
		const five = Math.imul(b, 5);
		const result = Math.imul((five << 7) | (five >>> 25), 9);
		this.#c ^= this.#a;
		this.#d ^= b;
		this.#b = b ^ this.#c;
		this.#a ^= this.#d;
		this.#c ^= b << 9;
		this.#d = (this.#d << 11) | (this.#d >>> 21);
		return result >>> 0;
	}

	/** Evenly spread between 0 and 1, neither of which it reaches. */
	nextUniform(): number {
		return (this.nextUint32() + 0.5) * TWO_TO_MINUS_32;
	}

	/**
	 * Writes standard normal numbers: the low 8 bits choose a layer of the ziggurat, the other 24 a
	 * place in it, so that the two are independent.
	 * @param out written from 0 to `count`
	 */
	fillNormals(out: Float64Array, count: number): void {
		// `nextUint32` written out on locals: the state stays in registers for the whole run.
		let a = this.#a;
		let b = this.#b;
		let c = this.#c;
		let d = this.#d;
		for (let i = 0; i < count; i++) {
			const five = Math.imul(b, 5);
			const bits = Math.imul((five << 7) | (five >>> 25), 9);
			const shifted = b << 9;
			c ^= a;
			d ^= b;
			b ^= c;
			a ^= d;
			c ^= shifted;
			d = (d << 11) | (d >>> 21);
			const layer = bits & (LAYERS - 1);
			const place = (bits >> 8) + 0.5;
			const x = place * WIDTH[layer]!;
			if (Math.abs(place) < ACCEPT[layer]!) {
				out[i] = x;
				continue;
			}
			this.#a = a;
			this.#b = b;
			this.#c = c;
			this.#d = d;
			out[i] = this.#atTheEdge(layer, x);
			a = this.#a;
			b = this.#b;
			c = this.#c;
			d = this.#d;
		}
		this.#a = a;
		this.#b = b;
		this.#c = c;
		this.#d = d;
	}

	/** A place that is not wholly under the curve: the tail, or a layer's outer end. */
	#atTheEdge(layer: number, x: number): number {
		if (layer === 0) return x < 0 ? -this.#tail() : this.#tail();
		const low = HEIGHT[layer]!;
		const height = low + this.nextUniform() * (HEIGHT[layer + 1]! - low);
		if (height < Math.exp(-0.5 * x * x)) return x;
		return this.#nextNormal();
	}

	#nextNormal(): number {
		const bits = this.nextUint32() | 0;
		const layer = bits & (LAYERS - 1);
		const place = (bits >> 8) + 0.5;
		const x = place * WIDTH[layer]!;
		return Math.abs(place) < ACCEPT[layer]! ? x : this.#atTheEdge(layer, x);
	}

	/** Beyond the base layer, by Marsaglia's method of two exponentials. */
	#tail(): number {
		for (;;) {
			const x = -Math.log(this.nextUniform()) / TAIL_FROM;
			const y = -Math.log(this.nextUniform());
			if (2 * y > x * x) return TAIL_FROM + x;
		}
	}
}

/**
 * A stream from one number: its words are scrambled steps of a golden-ratio counter.
 * @param seed a 32-bit whole number; others are cut to it
 * @source the finaliser of MurmurHash3 over a Weyl sequence, common practice; METHOD W7
 */
export function randomFrom(seed: number): Random {
	let counter = seed | 0;
	const word = (): number => {
		counter = (counter + 0x9e3779b9) | 0;
		let mixed = Math.imul(counter ^ (counter >>> 16), 0x85ebca6b);
		mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
		return mixed ^ (mixed >>> 16);
	};
	return new Random([word(), word(), word(), word()]);
}
