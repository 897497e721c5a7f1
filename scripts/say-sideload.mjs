/** How a manifest comes into Excel, printed by npm run start:excel; README.md says the same. */
export function saySideload(origin, manifest) {
  return `
The add-in is served at ${origin}. Bring its manifest into Excel:
  ${manifest}

Windows  Put it into a shared folder. In Excel: File, Options, Trust Center, Trust Center Settings,
         Trusted Add-in Catalogs; add the folder's address, tick Show in Menu; start Excel anew.
         Then Home, Add-ins, Shared Folder.
Mac      Copy it to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef (make the folder if
         it isn't there); start Excel anew. Then Home, Add-ins.
The web  Open ${origin}/pane.html once in the same browser, so that it trusts the address.
         Then in Excel: Home, Add-ins, More Add-ins, My Add-ins, Upload My Add-in.

A Coveledger button then stands on the Home tab. Ctrl-C stops serving.
`;
}
