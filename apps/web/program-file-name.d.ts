/**
 * The name of a program's file.
 * @param title the program's
 * @returns 'twenty-holds.drill.json'
 */
export declare function programFileName(title: string): string;
