' Types edits into a workbook, one after the other, each into the workbook as it was, and writes what its sheets then hold.
' A line of the script is a word and its values, separated by tabs; so is a line of what is written.

Private doc As Object
Private path As String
Private moved As Boolean
Private changed(200) As Object
Private formulas(200) As String
Private formats(200) As Long
Private changes As Integer

Sub Run(script As String, result As String)
  files = createUnoService("com.sun.star.ucb.SimpleFileAccess")
  source = createUnoService("com.sun.star.io.TextInputStream")
  source.setInputStream(files.openFileRead(ConvertToURL(script)))
  source.setEncoding("UTF-8")
  target = createUnoService("com.sun.star.io.TextOutputStream")
  target.setOutputStream(files.openFileWrite(ConvertToURL(result)))
  target.setEncoding("UTF-8")
  Do While Not source.isEOF()
    words = Split(source.readLine(), Chr(9))
    If UBound(words) >= 0 Then Act words, target
  Loop
  target.flush()
  target.closeOutput()
  source.closeInput()
  If Not IsNull(doc) Then doc.close(True)
  StarDesktop.terminate()
End Sub

Sub Act(words, target)
  Select Case words(0)
    Case "open"
      If Not IsNull(doc) Then doc.close(True)
      path = words(1)
      OpenBook
    Case "set"
      Change words
    Case "insert"
      doc.Sheets.getByName(words(1)).Rows.insertByIndex(CLng(words(2)) - 1, 1)
      moved = True
    Case "delete"
      doc.Sheets.getByName(words(1)).Rows.removeByIndex(CLng(words(2)) - 1, 1)
      moved = True
    Case "sort"
      SortRows words
      moved = True
    Case "dump"
      doc.calculate()
      target.writeString("edit" & Chr(9) & words(1) & Chr(10))
      For i = 2 To UBound(words)
        If doc.Sheets.hasByName(words(i)) Then Dump doc.Sheets.getByName(words(i)), target
      Next
    Case "time"
      doc.calculateAll()
      begun = GetSystemTicks()
      doc.calculateAll()
      target.writeString("took" & Chr(9) & (GetSystemTicks() - begun) & Chr(10))
    Case "save"
      Dim storing(0) As New com.sun.star.beans.PropertyValue
      storing(0).Name = "FilterName"
      storing(0).Value = "Calc MS Excel 2007 XML"
      doc.storeToURL(ConvertToURL(words(1)), storing())
    Case "back"
      Restore
  End Select
End Sub

Sub OpenBook
  Dim args(0) As New com.sun.star.beans.PropertyValue
  args(0).Name = "Hidden"
  args(0).Value = True
  doc = StarDesktop.loadComponentFromURL(ConvertToURL(path), "_blank", 0, args())
  moved = False
  changes = 0
End Sub

Sub Change(words)
  cell = doc.Sheets.getByName(words(1)).getCellRangeByName(words(2))
  changed(changes) = cell
  formulas(changes) = cell.Formula
  formats(changes) = cell.NumberFormat
  changes = changes + 1
  Select Case words(3)
    Case "number"
      cell.Value = Val(words(4))
    Case "percent"
      cell.Value = Val(words(4)) / 100
      cell.NumberFormat = 10
    Case "date"
      cell.Value = DateSerial(CInt(Left(words(4), 4)), CInt(Mid(words(4), 6, 2)), CInt(Mid(words(4), 9, 2)))
      cell.NumberFormat = 37
    Case "text"
      cell.String = words(4)
    Case "blank"
      cell.Formula = ""
  End Select
End Sub

Sub Restore
  If moved Then
    doc.close(True)
    OpenBook
  Else
    For i = changes - 1 To 0 Step -1
      changed(i).Formula = formulas(i)
      changed(i).NumberFormat = formats(i)
    Next
    changes = 0
  End If
End Sub

Sub SortRows(words)
  Dim fields(0) As New com.sun.star.table.TableSortField
  fields(0).Field = CLng(words(3))
  fields(0).IsAscending = True
  Dim how(1) As New com.sun.star.beans.PropertyValue
  how(0).Name = "SortFields"
  how(0).Value = fields()
  how(1).Name = "ContainsHeader"
  how(1).Value = False
  doc.Sheets.getByName(words(1)).getCellRangeByName(words(2)).sort(how())
End Sub

Sub Dump(sheet, target)
  cursor = sheet.createCursor()
  cursor.gotoEndOfUsedArea(False)
  rows = sheet.getCellRangeByPosition(0, 0, cursor.RangeAddress.EndColumn, cursor.RangeAddress.EndRow)
  target.writeString("sheet" & Chr(9) & sheet.Name & Chr(9) & rows.queryFormulaCells(4).RangeAddressesAsString & Chr(10))
  data = rows.getDataArray()
  For r = 0 To UBound(data)
    cells = data(r)
    text = ""
    filled = False
    For c = 0 To UBound(cells)
      text = text & Chr(9)
      If VarType(cells(c)) = 8 Then
        If cells(c) <> "" Then
          filled = True
          text = text & "t" & Join(Split(Join(Split(cells(c), Chr(10)), " "), Chr(9)), " ")
        End If
      ElseIf VarType(cells(c)) = 5 Then
        filled = True
        text = text & "n" & cells(c)
      End If
    Next
    If filled Then target.writeString("row" & Chr(9) & r & text & Chr(10))
  Next
End Sub
