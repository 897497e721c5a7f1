"""Writes workbooks whose lists are plain ranges, and has LibreOffice save them as .xlsx: run by hand, `python3 make.py`.

No table object, no name, no filter: a title over each list, an empty column at its left, a total under
one. In the first file no sheet bears a name of ours, in the second all but the rates do, in the third two
lists stand on one sheet. Gnumeric saves the first anew.
"""
import subprocess
from pathlib import Path
from xml.sax.saxutils import escape

HERE = Path(__file__).parent

TRIM = [
    [],
    [None, "Trim schedule, Birch Street branch"],
    [None, "measured with a tape, inches"],
    [],
    [None, "Room", "Wall", "Molding", "Length", "Qty"],
    [None, "Reading room", "north", "Base", 142.5, 1],
    [None, "Reading room", "east", "Base", "6' 2 1/4\"", 2],
    [None, "Office", "south", "Base", 88, 1],
    [],
    [None, "Total", None, None, "=SUM([.E6:.E8])", "=SUM([.F6:.F8])"],
]
MOLDINGS = [
    [None, "Moldings of this job"],
    [],
    [None, "Profile", "Make", "Blank width", "Blank thickness", "Offcut allowance %"],
    [None, "Base", "buy", 5.25, 0.75, 12],
]
LUMBER = [
    [None, "What the yard has, March"],
    [],
    [None, "For", "Kind", "Length", "Price", "Per", "Have"],
    [None, "Base", "stick", "16'", 27.5, "piece", 2],
    [None, "Base", "stick", "12'", 19.25, "piece", 0],
]
RATES = [
    [None, "Our rates"],
    [],
    [None, "Setting", "Value"],
    [None, "hourly rate", 58],
    [None, "margin %", 15],
    [None, "crosscut kerf", 0.125],
]


def cell(value):
    if value is None:
        return "<table:table-cell/>"
    if isinstance(value, str) and value.startswith("="):
        return f'<table:table-cell table:formula="of:{escape(value)}" office:value-type="float"/>'
    if isinstance(value, str):
        text = escape(value)
        return f'<table:table-cell office:value-type="string"><text:p>{text}</text:p></table:table-cell>'
    return f'<table:table-cell office:value-type="float" office:value="{value}"/>'


def sheet(name, rows):
    lines = "".join(
        f'<table:table-row>{"".join(map(cell, row)) or "<table:table-cell/>"}</table:table-row>' for row in rows
    )
    return f'<table:table table:name="{escape(name)}">{lines}</table:table>'


def write(name, sheets):
    names = {
        "office": "urn:oasis:names:tc:opendocument:xmlns:office:1.0",
        "table": "urn:oasis:names:tc:opendocument:xmlns:table:1.0",
        "text": "urn:oasis:names:tc:opendocument:xmlns:text:1.0",
        "of": "urn:oasis:names:tc:opendocument:xmlns:of:1.2",
    }
    spaces = " ".join(f'xmlns:{key}="{uri}"' for key, uri in names.items())
    body = "".join(sheet(*one) for one in sheets)
    source = HERE / f"{name}.fods"
    source.write_text(
        f'<?xml version="1.0" encoding="UTF-8"?><office:document {spaces} office:version="1.2" '
        'office:mimetype="application/vnd.oasis.opendocument.spreadsheet">'
        f"<office:body><office:spreadsheet>{body}</office:spreadsheet></office:body></office:document>",
        encoding="utf-8",
    )
    subprocess.run(
        ["soffice", "--headless", "--convert-to", "xlsx", "--outdir", str(HERE), str(source)],
        check=True,
    )
    source.unlink()
    return HERE / f"{name}.xlsx"


first = write(
    "libreoffice",
    [("Trim", TRIM), ("Moldings", MOLDINGS), ("Lumber", LUMBER), ("Rates", RATES)],
)
subprocess.run(["ssconvert", str(first), str(HERE / "gnumeric.xlsx")], check=True)
write(
    "rates-unnamed",
    [("Runs", TRIM), ("Profiles", MOLDINGS), ("Stock", LUMBER), ("Rates", RATES)],
)
write(
    "two-lists",
    [("Trim", TRIM), ("Materials", [*MOLDINGS, [], *LUMBER]), ("Rates", RATES)],
)
