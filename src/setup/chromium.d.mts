export declare function findChromium(): string | undefined;
export declare const chromiumArgs: string[];
