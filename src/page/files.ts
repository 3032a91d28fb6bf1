// Files that the page hands over: their names, and the way to the buyer's own disk.

/// "Buyer 1" -> "buyer-1.json".
export function file_name(name: string, ending: string): string {
    const plain = name
        .toLowerCase()
        .replace(/[^a-z0-9]+/g, '-')
        .replace(/^-|-$/g, '');
    return `${plain || 'buyer'}.${ending}`;
}

export function hand_over(content: Blob, name: string): void {
    const address = URL.createObjectURL(content);
    const link = document.createElement('a');
    link.href = address;
    link.download = name;
    link.click();
    URL.revokeObjectURL(address);
}
