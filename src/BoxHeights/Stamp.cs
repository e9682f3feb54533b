using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace BoxHeights;

/// <summary>Makes a few digits of a text.</summary>
internal static class Stamp
{
    private const int Bytes = 8;

    /// <summary>Sixteen hexadecimal digits that are hardly ever the same for another text.</summary>
    public static string Of(string text)
    {
        using SHA256 sha = SHA256.Create();
        byte[] hash = sha.ComputeHash(Encoding.UTF8.GetBytes(text));
        StringBuilder digits = new(2 * Bytes);
        for (int i = 0; i < Bytes; i++)
        {
            digits.Append(hash[i].ToString("x2", CultureInfo.InvariantCulture));
        }

        return digits.ToString();
    }
}
