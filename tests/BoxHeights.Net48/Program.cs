using System;
using System.Collections.Generic;
using System.IO;

namespace BoxHeights.PlugIn
{
    internal static class Program
    {
        public static int Main()
        {
#if NET48
            string[] libraries = Directory.GetFiles(AppDomain.CurrentDomain.BaseDirectory, "*.dll");
            if (libraries.Length != 1 || Path.GetFileName(libraries[0]) != "BoxHeights.dll")
            {
                Console.Error.WriteLine("Expected BoxHeights.dll alone, found: " + string.Join(", ", libraries));
                return 1;
            }
#endif

            List<string> findings = PlugInHouse.Lines();
            Console.WriteLine(string.Join(Environment.NewLine, findings));
            using (StreamReader expected = new StreamReader(typeof(Program).Assembly.GetManifestResourceStream("expected-findings.txt")))
            {
                string lines = expected.ReadToEnd();
                if (string.Join("\n", findings) + "\n" != lines)
                {
                    Console.Error.WriteLine("Expected:" + Environment.NewLine + lines);
                    return 1;
                }
            }

            Console.WriteLine(findings.Count + " lines, as expected.");
            return 0;
        }
    }
}
