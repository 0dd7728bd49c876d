/** Hands the user a file that the page holds, as the browser saves any other. */
export const handOver = (name: string, content: Blob): void => {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
};
