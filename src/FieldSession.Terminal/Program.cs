Terminal.Gui.App.IApplication? x=null; System.Console.WriteLine(x?.ToString() ?? "hello");
