/** @returns false when the build failed */
export declare function build(): boolean;
