"""Writes and reads workbooks with openpyxl, which shares nothing with ours. First argument: read or write; second: the file."""
import datetime
import sys

import openpyxl

if sys.argv[1] == "write":
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Weighed"
    sheet.append(["piece", "mass_g", "length", "turned"])
    sheet.append(["007", 213.5, '15 1/2"', datetime.date(2026, 11, 29)])
    sheet.append([8, 0.1, None, datetime.datetime(2026, 11, 29, 10, 30)])
    book.create_sheet("Other").append(["not", "this"])
    book.save(sys.argv[2])
else:
    for row in openpyxl.load_workbook(sys.argv[2])["Pieces"].iter_rows():
        print("|".join("%s:%r" % (cell.data_type, cell.value) for cell in row))
