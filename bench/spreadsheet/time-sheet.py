"""Times a full recalculation of a sheet in an office suite without a window: best of 7, printed as JSON.

Needs LibreOffice with its Python bindings (Debian: libreoffice-calc, python3-uno). Loading the file and starting the
program are not counted. The sum of column M is printed so that a wrong answer shows.
"""
import json
import os
import subprocess
import sys
import time

import uno
from com.sun.star.beans import PropertyValue

path = os.path.abspath(sys.argv[1])
pipe = f"deckbite{os.getpid()}"
office = subprocess.Popen(
    ["soffice", "--headless", "--invisible", "--norestore", f"-env:UserInstallation=file:///tmp/{pipe}", f"--accept=pipe,name={pipe};urp;"],
    stdout=subprocess.DEVNULL,
    stderr=subprocess.DEVNULL,
)
try:
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    for _ in range(120):
        try:
            context = resolver.resolve(f"uno:pipe,name={pipe};urp;StarOffice.ComponentContext")
            break
        except Exception:
            time.sleep(0.25)
    desktop = context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)
    hidden = PropertyValue()
    hidden.Name, hidden.Value = "Hidden", True
    book = desktop.loadComponentFromURL(uno.systemPathToFileUrl(path), "_blank", 0, (hidden,))
    sheet = book.Sheets.getByIndex(0)
    times = []
    for _ in range(7):
        start = time.perf_counter()
        book.calculateAll()
        times.append((time.perf_counter() - start) * 1000)
    total = sum(row[0] for row in sheet.getCellRangeByName("M2:M10001").getDataArray())
    print(json.dumps({"ms": min(times), "total": total}))
    book.close(True)
finally:
    office.kill()
